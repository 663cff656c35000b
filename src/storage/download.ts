/** Long enough for every browser to have begun its download. */
const KEPT_MS = 60_000;

/** Hands a file to the reader under a name. */
export function download(content: Blob, name: string): void {
  const url = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), KEPT_MS);
}
