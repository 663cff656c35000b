/** The mark of a fault on the panel and in the list; strokes have bare numbers, the section's ends letters. */
export function zoneLabel(fault: number): string {
  return `F${fault + 1}`;
}

/** Key of one zone of one fault on the canvas. */
export function zoneKey(fault: number, zone: number): string {
  return `${fault}:${zone}`;
}

/** The fault and zone that a key names. */
export function zoneOfKey(key: string): { readonly fault: number; readonly zone: number } {
  const [fault = 0, zone = 0] = key.split(':').map(Number);
  return { fault, zone };
}
