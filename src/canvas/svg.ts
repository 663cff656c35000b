const SVG_NS = 'http://www.w3.org/2000/svg';

export type SvgAttributes = Readonly<Record<string, string | number>>;

/** An SVG element with attributes; presentation attributes, so that the overlay can be saved as a picture. */
export function svgElement<K extends keyof SVGElementTagNameMap>(
  name: K, attributes: SvgAttributes = {}, children: readonly (Node | string)[] = [],
): SVGElementTagNameMap[K] {
  const element = document.createElementNS(SVG_NS, name);
  setAttributes(element, attributes);
  element.append(...children);
  return element;
}

export function setAttributes(element: Element, attributes: SvgAttributes): void {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
}

/** A rim of paper around lettering, so that it reads over the map and hides little of it. */
export function paperRim(paper: string): SvgAttributes {
  return { stroke: paper, 'stroke-width': 4, 'stroke-linejoin': 'round', 'paint-order': 'stroke' };
}

/** Half pixels, so that one-pixel lines are sharp. */
export function sharp(px: number): number {
  return Math.round(px) + 0.5;
}
