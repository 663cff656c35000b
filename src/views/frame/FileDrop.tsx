import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';

export interface FileDropProps {
  readonly name: string;
  /** Class while files hang over it, beside its own. */
  readonly over?: string;
  readonly take: (files: readonly File[]) => void;
  readonly isBusy?: boolean;
  readonly children: ComponentChildren;
}

/** A part of a stage that takes dropped files, which then go no further. */
export function FileDrop({ name, over = 'dropping', take, isBusy, children }: FileDropProps): JSX.Element {
  const [isOver, setOver] = useState(false);
  return (
    <div
      class={isOver ? `${name} ${over}` : name}
      aria-busy={isBusy}
      onDragOver={(event) => {
        event.preventDefault();
        event.stopPropagation();
        setOver(true);
      }}
      onDragLeave={(event) => {
        if (!(event.relatedTarget instanceof Node) || !event.currentTarget.contains(event.relatedTarget)) setOver(false);
      }}
      onDrop={(event) => {
        event.preventDefault();
        event.stopPropagation();
        setOver(false);
        const files = [...(event.dataTransfer?.files ?? [])];
        if (files.length > 0) take(files);
      }}
    >
      {children}
    </div>
  );
}
