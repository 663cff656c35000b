import type { JSX } from 'preact';
import type { ShapeSpec } from '../../../sim/index.ts';
import { changeJob } from '../../app/document.ts';
import { pointerOf, withValueAt, type JobPath } from '../../app/path.ts';
import { newShape, pointsText, shapeKind, type ShapeKind } from '../../app/shapeText.ts';
import { typePath, typePoints } from '../../app/shapeCommands.ts';
import { state } from '../../app/state.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { NumberField } from '../fields/NumberField.tsx';
import { TextDraftField } from '../fields/TextDraftField.tsx';

const KINDS: readonly (readonly [kind: ShapeKind, words: string])[] = [
  ['rectangle', 'Rectangle'],
  ['circle', 'Circle'],
  ['points', 'Corners'],
  ['path', 'SVG path'],
];

export interface ShapeEditorProps {
  readonly path: JobPath;
  readonly shape: ShapeSpec;
  readonly name: string;
  /** A size for a shape of a new kind, mm. */
  readonly size_mm: readonly [number, number];
}

/** One outline or hole, stated in any of four ways. */
export function ShapeEditor({ path, shape, name, size_mm }: ShapeEditorProps): JSX.Element {
  const kind = shapeKind(shape);
  return (
    <>
      <ChoiceField
        id={`${path.join('-')}-kind`}
        label={name}
        value={kind}
        options={KINDS}
        choose={(next) => changeJob(`${name}: shape`, withValueAt(state.job.peek(), path, newShape(next, ...size_mm)))}
      />
      <ShapeFields path={path} shape={shape} name={name} />
    </>
  );
}

function ShapeFields({ path, shape, name }: Omit<ShapeEditorProps, 'size_mm'>): JSX.Element {
  if ('rectangle_mm' in shape) {
    return (
      <>
        <NumberField path={[...path, 'rectangle_mm', 0]} label="Width" />
        <NumberField path={[...path, 'rectangle_mm', 1]} label="Height" />
      </>
    );
  }
  if ('circle_mm' in shape) {
    return (
      <>
        <NumberField path={[...path, 'circle_mm', 0]} label="Centre from the left" />
        <NumberField path={[...path, 'circle_mm', 1]} label="Centre from below" />
        <NumberField path={[...path, 'circle_mm', 2]} label="Diameter" />
      </>
    );
  }
  if ('points_mm' in shape) {
    return (
      <TextDraftField
        pointer={pointerOf([...path, 'points_mm'])}
        label={`${name}: corners, x, y in mm, one a line`}
        text={pointsText(shape.points_mm)}
        hint="x runs right and y up, as the sprayer sees the part. The last corner joins the first."
        type={(text) => typePoints(path, name, text)}
      />
    );
  }
  return (
    <TextDraftField
      pointer={pointerOf([...path, 'path_mm'])}
      label={`${name}: SVG path, mm, y up`}
      text={shape.path_mm}
      hint="M L H V C S Q T A Z, one closed line. From a drawing program, turn it over first: there y runs down."
      type={(text) => typePath(path, name, text)}
    />
  );
}
