import type { JSX, TargetedPointerEvent } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { CORNER_WORDS, cornerStep, withCorner, type Corners, type PhotoPlace } from '../../../app/setups/corners.ts';
import type { OpenPhoto } from '../../../app/setups/photoFile.ts';

export interface PhotoCornersProps {
  readonly photo: OpenPhoto;
  readonly corners: Corners;
  readonly move: (corners: Corners) => void;
}

/** The photograph with a handle on each corner of the rectangle: dragged by mouse, finger or pen, or moved by the arrow keys. */
export function PhotoCorners({ photo, corners, move }: PhotoCornersProps): JSX.Element {
  const host = useRef<HTMLDivElement>(null);
  const { canvas } = photo;
  useEffect(() => {
    canvas.setAttribute('role', 'img');
    canvas.setAttribute('aria-label', `Photograph ${photo.name}`);
    host.current?.append(canvas);
    return () => canvas.remove();
  }, [canvas]);
  const { width, height } = canvas;
  const moveTo = (corner: number, place: PhotoPlace): void => move(withCorner(corners, corner, place, width, height));
  return (
    <div class="photo-corners">
      <div class="photo-sheet">
        <div ref={host} />
        <svg viewBox={`0 0 ${width} ${height}`} preserveAspectRatio="none" aria-hidden="true">
          <polygon class="photo-rim under" points={corners.map(String).join(' ')} />
          <polygon class="photo-rim" points={corners.map(String).join(' ')} />
        </svg>
        {corners.map((at, corner) => (
          <Handle key={corner} corner={corner} at={at} size={[width, height]} moveTo={(place) => moveTo(corner, place)} />
        ))}
      </div>
      <p class="soft" id="photo-corners-help">Drag each corner onto a corner of the card. Arrow keys move the one in hand by a pixel of the photograph, with Shift by ten.</p>
    </div>
  );
}

interface HandleProps {
  readonly corner: number;
  readonly at: PhotoPlace;
  readonly size: PhotoPlace;
  readonly moveTo: (place: PhotoPlace) => void;
}

function Handle({ corner, at: [x, y], size: [width, height], moveTo }: HandleProps): JSX.Element {
  /** From the pointer to the corner, so that it does not jump when taken hold of, CSS px. */
  const grip = useRef<PhotoPlace | null>(null);
  const follow = (event: TargetedPointerEvent<HTMLButtonElement>): void => {
    const box = event.currentTarget.parentElement?.getBoundingClientRect();
    if (grip.current === null || box === undefined) return;
    const [dx, dy] = grip.current;
    moveTo([((event.clientX + dx - box.left) / box.width) * width, ((event.clientY + dy - box.top) / box.height) * height]);
  };
  return (
    <button
      type="button"
      class="photo-handle"
      style={{ left: `${(x / width) * 100}%`, top: `${(y / height) * 100}%` }}
      aria-label={`Corner ${CORNER_WORDS[corner] ?? ''}: ${Math.round(x)} px from the left, ${Math.round(y)} px from the top`}
      aria-describedby="photo-corners-help"
      onPointerDown={(event) => {
        const box = event.currentTarget.getBoundingClientRect();
        grip.current = [box.left + box.width / 2 - event.clientX, box.top + box.height / 2 - event.clientY];
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={follow}
      onPointerUp={() => (grip.current = null)}
      onPointerCancel={() => (grip.current = null)}
      onKeyDown={(event) => {
        const step = cornerStep(event.key, event.shiftKey);
        if (step === null) return;
        event.preventDefault();
        moveTo([x + step[0], y + step[1]]);
      }}
    />
  );
}
