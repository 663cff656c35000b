// Adds up what vitest and playwright wrote and prints one closing line. Exits 1 where a report is
// missing or empty, so that a suite which ran nothing cannot look green.
import { readFileSync } from 'node:fs';

const unit = JSON.parse(readFileSync('test-results/unit.json', 'utf8'));
const browser = JSON.parse(readFileSync('test-results/browser.json', 'utf8'));

const passed = unit.numPassedTests + browser.stats.expected;
const failed = unit.numFailedTests + browser.stats.unexpected + browser.stats.flaky;
const skipped = unit.numPendingTests + browser.stats.skipped;

console.log(`unit and model: ${unit.numPassedTests} tests in ${unit.testResults.length} files`);
console.log(`real browser: ${browser.stats.expected} tests`);
console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);

const ranNothing = unit.numPassedTests === 0 || browser.stats.expected === 0;
process.exit(failed > 0 || ranNothing ? 1 : 0);
