/** An id that no other job of any browser has: 96 bits of chance. Pages of a shop's own network have no `randomUUID`. */
export function freshJobId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return `job-${[...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}
