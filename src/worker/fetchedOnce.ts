/** Something that is fetched when it is first asked for, and kept; a fetch that failed is tried again at the next question. */
export function fetchedOnce<T>(fetchIt: () => Promise<T>): () => Promise<T> {
  let kept: Promise<T> | null = null;
  return () => {
    const asked = (kept ??= fetchIt());
    asked.catch(() => (kept = null));
    return asked;
  };
}
