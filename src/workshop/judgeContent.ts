import { CrosscoatError, parseJob, parseRubric, parseSession, serialiseJob, serialiseSession, sha256Of } from '../../sim/index.ts';
import { signedIn, type SignedIn } from './signedIn.ts';

/** What a file holds, as far as lists need it. `asWritten`: SHA-256 of it as this build would write it, which knows the same content in another layout or version again. */
export type FileContent =
  | { readonly kind: 'job'; readonly name: string; readonly part: string; readonly coats: number; readonly signed: SignedIn<readonly string[]>; readonly asWritten: string }
  | { readonly kind: 'session'; readonly id: string; readonly name: string; readonly trainee: string; readonly title: string; readonly sprayedAt: string; readonly asWritten: string }
  | { readonly kind: 'rubric'; readonly name: string };

/** A file that can be used, with the SHA-256 of its bytes; or why it cannot. */
export type JudgedContent = { readonly content: FileContent; readonly sha256: string } | { readonly why: string };

/** Says what a file's bytes hold, by what is in them and not by their name. */
export function judgeContent(bytes: Uint8Array, name: string): JudgedContent {
  try {
    const text = textIn(bytes, name);
    return { content: contentOf(text, name), sha256: sha256Of(text) };
  } catch (thrown) {
    return { why: messageOf(thrown) };
  }
}

function contentOf(text: string, file: string): FileContent {
  switch (kindOf(text)) {
    case 'session': {
      const session = parseSession(text, file);
      const { id, name, trainee, task, sprayedAt } = session;
      return { kind: 'session', id, name, trainee, title: task.title, sprayedAt, asWritten: sha256Of(serialiseSession(session)) };
    }
    case 'rubric':
      return { kind: 'rubric', name: parseRubric(text, file).name };
    case 'job': {
      const { job } = parseJob(text, file);
      return { kind: 'job', name: job.name, part: job.part.name, coats: job.coats.length, signed: signedIn(job), asWritten: sha256Of(serialiseJob(job)) };
    }
  }
}

/** A version key says what a file is; a text with none is read as a job, which says best what is wrong. A session holds a job, so its own key is looked for first. */
function kindOf(text: string): FileContent['kind'] {
  return /"sessionVersion"\s*:/.test(text) ? 'session' : /"rubricVersion"\s*:/.test(text) ? 'rubric' : 'job';
}

/** Bytes as UTF-8 text, a byte order mark kept. @throws CrosscoatError `schema`. */
export function textIn(bytes: Uint8Array, name: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new CrosscoatError('schema', `${name} is no UTF-8 text; save it again as such`, { file: name });
  }
}

/** The words of what was thrown, without the reader's own name before them. */
export function messageOf(thrown: unknown): string {
  return (thrown instanceof Error ? thrown.message : String(thrown)).replace(/^parse\w+: /, '');
}
