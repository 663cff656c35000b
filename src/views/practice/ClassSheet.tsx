import type { JSX } from 'preact';
import { markForClass } from '../../app/practice/debriefing.ts';
import { rubric } from '../../app/practice/practice.ts';
import { state } from '../../app/state.ts';
import { ClassView } from './progress/ClassView.tsx';

/** A class's sessions, marked by the rubric in use. */
export function ClassSheet(): JSX.Element {
  return <ClassView rubric={rubric.value} system={state.units.value} mark={markForClass} />;
}
