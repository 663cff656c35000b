import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

/**
 * The width of a box as laid out, followed; `usual_px` until it is known and while the box is hidden.
 * @param paper_px width while printing, where what is drawn is scaled to the sheet; as on screen where not given.
 */
export function useWidth(usual_px: number, paper_px?: number): { readonly box: RefObject<HTMLDivElement | null>; readonly width_px: number } {
  const box = useRef<HTMLDivElement>(null);
  const [screen_px, setWidth] = useState(usual_px);
  const [isPrinting, setPrinting] = useState(false);
  useEffect(() => {
    if (box.current === null) return undefined;
    const observer = new ResizeObserver(([entry]) => {
      const width = Math.floor(entry?.contentRect.width ?? 0);
      if (width > 0) setWidth(width);
    });
    observer.observe(box.current);
    return () => observer.disconnect();
  }, []);
  useEffect(() => {
    const begin = (): void => setPrinting(true);
    const end = (): void => setPrinting(false);
    addEventListener('beforeprint', begin);
    addEventListener('afterprint', end);
    return () => {
      removeEventListener('beforeprint', begin);
      removeEventListener('afterprint', end);
    };
  }, []);
  return { box, width_px: isPrinting ? (paper_px ?? screen_px) : screen_px };
}
