import { execFileSync } from 'node:child_process';
import { cpus, loadavg, release, totalmem, type as system } from 'node:os';
import { fileURLToPath } from 'node:url';
import { findBrowser } from '../browser.ts';
import { print, type Figure } from './figure.ts';

/** What the numbers were measured on: they mean nothing without it. */
export function machineFigure(): Figure {
  const cores = cpus();
  const browser = execFileSync(findBrowser(), ['--version'], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'ignore'],
  }).trim();
  const parts = [
    cores[0]?.model ?? 'unknown processor',
    `${cores.length} cores`,
    `${Math.round(totalmem() / 2 ** 30)} GiB`,
    `${system()} ${release()}`,
    `Node ${process.version}`,
    browser,
    `load ${loadavg()[0]?.toFixed(1)}`,
  ];
  return { name: 'machine', value: parts.join(', '), unit: 'text' };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) print(machineFigure());
