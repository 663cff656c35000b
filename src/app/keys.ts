import { redo, undo } from './document.ts';
import { saveJob } from './files.ts';

/** Undo, redo and save by the keys that every desk knows. */
export function bindKeys(): void {
  addEventListener('keydown', (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const act = actOf(event.key.toLowerCase(), event.shiftKey);
    if (act === null) return;
    event.preventDefault();
    act();
  });
}

function actOf(key: string, isShifted: boolean): (() => void) | null {
  if (key === 's' && !isShifted) return saveJob;
  if (key === 'z') return isShifted ? redo : undo;
  return key === 'y' ? redo : null;
}
