import { layOver } from '../frame/layOver.tsx';
import { LogStage } from './LogStage.tsx';

/** Lays the log over the window. */
export function showLog(): void {
  layOver((close) => <LogStage close={close} />);
}
