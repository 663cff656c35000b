/** Writes the demo's recorded session and its record anew: `npx tsx tests/helpers/writeDemoSession.ts`. */
import { writeFileSync } from 'node:fs';
import { DEMO_RECORD_PATH, demoRecordText } from './recordDemo.ts';
import { DEMO_SESSION_PATH, demoSessionText } from './sessionDemo.ts';

for (const [path, text] of [[DEMO_SESSION_PATH, demoSessionText()], [DEMO_RECORD_PATH, demoRecordText()]] as const) {
  writeFileSync(new URL(`../../${path}`, import.meta.url), text);
  console.log(`${path}: ${text.split('\n').length - 1} lines, ${text.length} characters`);
}
