import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const USUAL_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

const HELP =
  'No Chromium was found for the browser tests. Install it (Debian, Ubuntu: apt-get install chromium) ' +
  'or set CROSSCOAT_BROWSER to the path of a Chromium or Chrome.';

function presentBrowser(): string | undefined {
  const named = process.env['CROSSCOAT_BROWSER'];
  if (named !== undefined && named !== '') return named;
  return USUAL_PLACES.find((place) => existsSync(place));
}

/** On Debian as root, the browser is one package away; elsewhere its owner decides. */
function installOnDebian(): void {
  const isRootOnDebian = process.getuid?.() === 0 && existsSync('/etc/debian_version');
  if (!isRootOnDebian) throw new Error(HELP);
  const script = 'apt-get update && DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends chromium';
  const { status } = spawnSync('sh', ['-c', script], { stdio: 'inherit' });
  if (status !== 0) throw new Error(HELP);
}

/** Path of a Chromium for the real-browser tests; installs Debian's where that is possible. */
export function findBrowser(): string {
  const present = presentBrowser();
  if (present !== undefined) return present;
  installOnDebian();
  const installed = presentBrowser();
  if (installed === undefined) throw new Error(HELP);
  return installed;
}
