/** One animation-frame queue for whatever is too dear to redraw at once: each job runs once a frame. */
const due = new Set<() => void>();
let frame = 0;

export function redraw(job: () => void): void {
  due.add(job);
  frame ||= requestAnimationFrame(() => {
    frame = 0;
    const jobs = [...due];
    due.clear();
    for (const run of jobs) run();
  });
}
