// Installs what is missing, and only then: a second start must not wait for the network.
import { execSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';

const wanted = JSON.parse(readFileSync('package-lock.json', 'utf8')).packages;
const have = existsSync('node_modules/.package-lock.json')
  ? JSON.parse(readFileSync('node_modules/.package-lock.json', 'utf8')).packages
  : {};

const missing = Object.entries(wanted).some(
  ([path, { version, optional }]) => path !== '' && !optional && have[path]?.version !== version,
);

if (missing) {
  console.log('Installing what is missing…');
  execSync('npm ci --no-audit --no-fund', { stdio: 'inherit' });
}
