import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';
import { openFile } from '../../app/files.ts';

/** The whole window takes dropped files: a job, or a recorded path. */
export function DropTarget({ children }: { readonly children: ComponentChildren }): JSX.Element {
  const [isOver, setOver] = useState(false);
  return (
    <div
      class={isOver ? 'sheet dropping' : 'sheet'}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={(event) => {
        if (event.relatedTarget === null) setOver(false);
      }}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        const file = event.dataTransfer?.files[0];
        if (file !== undefined) void openFile(file);
      }}
    >
      {children}
      {isOver ? <p class="drop-words">Drop a job or a recorded path here</p> : null}
    </div>
  );
}
