// Runs npm scripts side by side: none of them uses more than one core. Prints each one's output when it ends; fails if any does.
import { spawn } from 'node:child_process';

const ended = process.argv.slice(2).map(
  (script) =>
    new Promise((resolve) => {
      const child = spawn('npm', ['run', '--silent', script], { shell: process.platform === 'win32' });
      let said = '';
      child.stdout.on('data', (text) => (said += text));
      child.stderr.on('data', (text) => (said += text));
      child.on('error', (error) => resolve({ script, said: `${said}${error.message}\n`, code: 1 }));
      child.on('close', (code) => resolve({ script, said, code: code ?? 1 }));
    }).then((end) => {
      process.stdout.write(`${end.said}${script} ${end.code === 0 ? 'passed' : 'FAILED'}\n`);
      return end.code;
    }),
);
process.exitCode = (await Promise.all(ended)).some((code) => code !== 0) ? 1 : 0;
