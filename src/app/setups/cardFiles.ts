import { CrosscoatError, LONGEST_READINGS } from '../../../sim/index.ts';
import { problemOf } from '../problem.ts';
import { takePhoto } from './cardPhoto.ts';
import { putReadings } from './cardReadings.ts';
import { isPhoto } from './photoFile.ts';
import { setUps } from './setUps.ts';

/** Most bytes of a letter in UTF-8. */
const BYTES_PER_LETTER = 4;

/** Opens readings (CSV) or a photograph, by what the file is. A bad file changes nothing. */
export async function openCardFile(file: File): Promise<void> {
  if (isPhoto(file)) return takePhoto(file);
  try {
    // Refused before it is read, where its length leaves no doubt.
    if (file.size > BYTES_PER_LETTER * LONGEST_READINGS) throw tooLong(file.name);
    const text = await file.text();
    if (text.length > LONGEST_READINGS) throw tooLong(file.name);
    putReadings(`Readings of ${file.name}`, text);
    setUps.problem.value = null;
  } catch (thrown) {
    setUps.problem.value = problemOf(`${file.name} was not opened; nothing was changed`, thrown);
  }
}

function tooLong(file: string): CrosscoatError {
  return new CrosscoatError('limit', `${file} has more than the ${LONGEST_READINGS} letters that a card holds; keep the readings across the fan, and leave other columns and rows out`, { file });
}
