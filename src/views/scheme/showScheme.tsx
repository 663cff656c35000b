import { layOver } from '../frame/layOver.tsx';
import { SchemeStage } from './SchemeStage.tsx';

/** Lays the scheme over the window. */
export function showScheme(): void {
  layOver((close) => <SchemeStage close={close} />);
}
