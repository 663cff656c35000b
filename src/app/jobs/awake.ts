/** Lets the page draw and take keys between two pieces of work. */
export function awake(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
