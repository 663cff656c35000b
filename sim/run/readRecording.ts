import { createRecordingReader, type Recording } from '../stroke/recordingReader.ts';

/**
 * Reads a recorded file from its text, whole (a list of one) or piece by piece.
 * @param fileName for errors and warnings. @throws CrosscoatError with file, row and column.
 */
export function readRecording(chunks: Iterable<string>, fileName: string): Recording {
  const reader = createRecordingReader({ fileName });
  for (const chunk of chunks) reader.push(chunk);
  return reader.end();
}
