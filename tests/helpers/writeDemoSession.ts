/** Writes the demo's recorded session anew: `npx tsx tests/helpers/writeDemoSession.ts`. */
import { writeFileSync } from 'node:fs';
import { DEMO_SESSION_PATH, demoSessionText } from './sessionDemo.ts';

const text = demoSessionText();
writeFileSync(new URL(`../../${DEMO_SESSION_PATH}`, import.meta.url), text);
console.log(`${DEMO_SESSION_PATH}: ${text.split('\n').length - 2} rows, ${text.length} characters`);
