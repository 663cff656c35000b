/** Longest line of a report, so that it fits a plain terminal. */
const LINE_LENGTH = 96;
/** Spaces at which a line may break: not between a number and its unit. */
const BREAKS = /(?<!\d) | (?!(?:µm|mil|mm|mL|cm²|in²|in|fl|m\/s|ft\/min|s|min|h|°C|°F|g\/m²|oz\/yd²|%)(?![a-z]))/;

/** A head and its texts as a list. */
export function bulleted(head: string, texts: readonly string[]): string[] {
  return [head, ...texts.flatMap((text) => wrapped(text, '- ', '  '))];
}

/** A text broken at spaces into lines that fit: the first starts with `first`, the others with `indent`. */
export function wrapped(text: string, first = '', indent = first): string[] {
  const lines: string[] = [];
  let line = first;
  let isBare = true;
  for (const word of text.split(BREAKS)) {
    if (!isBare && line.length + 1 + word.length > LINE_LENGTH) {
      lines.push(line);
      line = indent;
      isBare = true;
    }
    line += isBare ? word : ` ${word}`;
    isBare = false;
  }
  return [...lines, line];
}
