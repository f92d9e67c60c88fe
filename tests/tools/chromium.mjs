// Real Chromium without root and without a system browser: the npm package carries
// it compressed. Its own unpacking goes to a fixed name in the shared temporary
// folder and reuses whatever lies there, so it is unpacked here, once a version.

import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { brotliDecompressSync } from 'node:zlib';
import { inRoot } from './root.mjs';

const source = inRoot('node_modules/@sparticuz/chromium');

/**
 * How to launch the tests' browser. CHROMIUM_BIN names another one to use instead;
 * it is needed off Linux x86-64, where the packed one can't run.
 * @returns {import('playwright').LaunchOptions}
 */
export function launchOptions() {
  const own = process.env.CHROMIUM_BIN;
  if (own) return { executablePath: own };
  const dir = unpacked();
  return {
    executablePath: `${dir}/chromium`,
    env: {
      ...env(),
      // Under a C locale this build calls its language 'en-US@posix', which Intl refuses.
      LANG: 'en_US.UTF-8',
      LD_LIBRARY_PATH: `${dir}/lib`,
      FONTCONFIG_FILE: `${dir}/own-fonts.conf`,
    },
  };
}

function env() {
  /** @type {Record<string, string>} */
  const defined = {};
  for (const [key, value] of Object.entries(process.env)) if (value !== undefined) defined[key] = value;
  return defined;
}

/** The folder with the unpacked browser; two runs at once may both unpack, one wins. */
function unpacked() {
  /** @type {{ version: string }} */
  const { version } = JSON.parse(readFileSync(`${source}/package.json`, 'utf8'));
  const dir = inRoot(`node_modules/.cache/chromium-${version}`);
  if (existsSync(dir)) return dir;

  const fresh = `${dir}.${process.pid}`;
  mkdirSync(fresh, { recursive: true });
  writeFileSync(`${fresh}/chromium`, inflate('chromium.br'), { mode: 0o755 });
  for (const pack of ['swiftshader', 'fonts', 'al2023']) {
    const tar = spawnSync('tar', ['xf', '-', '-C', fresh], { input: inflate(`${pack}.tar.br`) });
    if (tar.status !== 0) throw new Error(`tar could not unpack ${pack}: ${tar.stderr.toString()}`);
  }
  // The shipped font list names fixed folders; this one names ours.
  writeFileSync(
    `${fresh}/own-fonts.conf`,
    `<?xml version="1.0"?><fontconfig><dir>${dir}/fonts</dir><cachedir>${dir}/font-cache</cachedir></fontconfig>\n`,
  );
  try {
    renameSync(fresh, dir);
  } catch (error) {
    rmSync(fresh, { recursive: true });
    if (!existsSync(dir)) throw error;
  }
  return dir;
}

/** @param {string} name */
function inflate(name) {
  return brotliDecompressSync(readFileSync(`${source}/bin/${name}`));
}
