/** One queue for whatever is too dear to redraw at once: each job runs once before the browser next paints. */
const due = new Set<() => void>();
let asked = 0;

export function redraw(job: () => void): void {
  due.add(job);
  asked ||= requestAnimationFrame(() => {
    asked = 0;
    const jobs = [...due];
    due.clear();
    for (const run of jobs) run();
  });
}
