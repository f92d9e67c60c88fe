/** `npm start` serves the site and says where, also where its port is taken. */
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { expect, onTestFinished, test } from 'vitest';
import { inRoot } from '../tools/root.mjs';

const PORT = 4173;

/** Takes the port, unless somebody has it already. */
function takePort(): Promise<void> {
  const server = createServer();
  onTestFinished(() => void server.close());
  return new Promise((resolve, reject) => {
    server.once('error', (fault: NodeJS.ErrnoException) =>
      fault.code === 'EADDRINUSE' ? resolve() : reject(fault),
    );
    server.listen(PORT, '127.0.0.1', resolve);
  });
}

test(
  'a taken port is passed by for the next free one, and the address is said',
  { timeout: 200_000 },
  async () => {
    const { scripts } = JSON.parse(readFileSync(inRoot('package.json'), 'utf8')) as {
      scripts: { start: string };
    };
    const [program = '', ...args] = scripts.start.split(' ');
    expect(program).toBe('node');
    await takePort();
    const started = spawn(process.execPath, args, { cwd: inRoot(''), stdio: ['ignore', 'pipe', 'pipe'] });
    onTestFinished(() => void started.kill());
    let said = '';
    for (const stream of [started.stdout, started.stderr])
      stream.on('data', (text: Buffer) => (said += text.toString()));
    await expect.poll(() => said, { timeout: 150_000 }).toMatch(/open at http:\/\/127\.0\.0\.1:\d+\//);
    const address = /http:\S+/.exec(said)![0]; // as was just seen
    expect(Number(new URL(address).port)).toBeGreaterThan(PORT);
    expect(await (await fetch(address)).text()).toContain('<title>Battenbook');
  },
);
