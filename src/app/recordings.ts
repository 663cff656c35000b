import { CrosscoatError, LONGEST_RECORDING, withRecording } from '../../sim/index.ts';
import { changeJob, coat } from './document.ts';
import { freshId } from './freshId.ts';
import type { Session } from './session.ts';
import { state } from './state.ts';

/**
 * Reads a recorded path and lays the coat in hand by it, undoable. Nothing changes where the
 * text is no recording: the worker's reader throws, with file, row and column.
 */
export async function addRecording(session: Session, name: string, text: string): Promise<void> {
  if (text.length > LONGEST_RECORDING) {
    throw new CrosscoatError(
      'limit',
      `${name} is ${Math.round(text.length / 1e6)} million letters long, more than ${LONGEST_RECORDING / 1e6} million; cut the recording into parts, or use the command line`,
      { file: name },
    );
  }
  const id = freshId('recording', state.job.peek().recordings.map((each) => each.id));
  await session.readRecording(id, name, text);
  changeJob(`Recording ${name}`, withRecording(state.job.peek(), coat.peek().id, { id, name, text }));
}
