import type { JSX } from 'preact';
import { chainWords, dayOf, dayWords, MINUTES_PER_DAY, readySentence, type DayHour, type DayPlan, type LaidChain } from '../../../../sim/index.ts';
import { useWidth } from '../../../charts/useWidth.ts';

/** Least width of an hour: a step of 20 minutes can still be seen, and a working day shows its words. Few days take all the width. */
const LEAST_PX_PER_HOUR = 14;
const USUAL_px = 960;
const HOURS_PER_DAY = 24;
const HEAD = 30;
const ROW = 132;
const BAR_TOP = 68;
const BAR = 28;

/** The days as a bar for each scheme: solid blocks are work, hatched ones waits; the line below says whether its next coat, or tape set in wet dope, could go on. */
export function DaysBar({ plan }: { readonly plan: DayPlan }): JSX.Element {
  const { timeline } = plan;
  const from = dayOf(timeline.start);
  const days = Math.max(1, Math.ceil((timeline.ready - from) / MINUTES_PER_DAY));
  const { box, width_px } = useWidth(USUAL_px);
  const hour_px = Math.max(LEAST_PX_PER_HOUR, width_px / (days * HOURS_PER_DAY));
  const x = (minute: number): number => ((minute - from) / 60) * hour_px;
  const width = x(from + days * MINUTES_PER_DAY);
  const height = HEAD + ROW * timeline.chains.length;
  return (
    <>
      {width > width_px ? <p>Scroll sideways to the last day, {dayWords(from + (days - 1) * MINUTES_PER_DAY)}.</p> : null}
      <div ref={box} class="scroll-box scheme-days-bar" tabIndex={0} role="region" aria-label="Time bar of the days">
        <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} role="img" aria-label={readySentence(plan)}>
          <defs>
            <pattern id="days-wait" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0,0 V7" class="days-hatch" /></pattern>
          </defs>
          {Array.from({ length: days }, (_, day) => <Day key={day} midnight={from + day * MINUTES_PER_DAY} plan={plan} x={x} height={height} />)}
          {timeline.chains.map((chain, i) => <Chain key={chain.chain.schemeId} chain={chain} hours={plan.hours[i] ?? []} top={HEAD + ROW * i} x={x} />)}
        </svg>
      </div>
    </>
  );
}

function Day({ midnight, plan: { working }, x, height }: { readonly midnight: number; readonly plan: DayPlan; readonly x: (minute: number) => number; readonly height: number }): JSX.Element {
  const [weekday = '', date = '', month = ''] = dayWords(midnight).split(' ');
  const isOff = !working.weekends && (weekday === 'Saturday' || weekday === 'Sunday');
  const [opens, shuts, end] = [midnight + (isOff ? MINUTES_PER_DAY : working.from_min), midnight + working.to_min, midnight + MINUTES_PER_DAY];
  return (
    <>
      <rect class="days-night" x={x(midnight)} width={x(opens) - x(midnight)} y={HEAD} height={height - HEAD} />
      {isOff ? null : <rect class="days-night" x={x(shuts)} width={x(end) - x(shuts)} y={HEAD} height={height - HEAD} />}
      <path class="chart-axis" d={`M${x(midnight)},0 V${height}`} />
      <text x={x(midnight) + 6} y={20}>{`${weekday} ${date} ${month}${isOff ? ', no work' : ''}`}</text>
    </>
  );
}

function Chain({ chain: laidChain, hours, top, x }: { readonly chain: LaidChain; readonly hours: readonly DayHour[]; readonly top: number; readonly x: (minute: number) => number }): JSX.Element {
  const bar = top + BAR_TOP;
  return (
    <>
      <text class="days-name" x={6} y={top + 20}>{chainWords(laidChain)}</text>
      {laidChain.laid.map(({ task, start, end, wait }, k) => (
        <g key={task.id}>
          {wait === null || wait.until <= end ? null : <rect class="days-wait" x={x(end)} width={x(wait.until) - x(end)} y={bar + 5} height={BAR - 10} />}
          <rect class="days-work" x={x(start)} width={Math.max(3, x(end) - x(start))} y={bar} height={BAR} />
          <text class="days-number" x={x(start)} y={bar - (k % 2 === 0 ? 6 : 24)}>{k + 1}</text>
        </g>
      ))}
      {stretches(hours).map(({ verdict, from, to }) => (
        <g key={from}>
          <path class={`days-verdict ${verdict}`} d={`M${x(from) + 1},${bar + BAR + 9} H${x(to) - 1}`} />
          {x(to) - x(from) < 40 ? null : <text x={x(from) + 2} y={bar + BAR + 28}>{verdict}</text>}
        </g>
      ))}
    </>
  );
}

/** Hours of one verdict that follow each other. */
function stretches(hours: readonly DayHour[]): { readonly verdict: DayHour['verdict']; readonly from: number; readonly to: number }[] {
  const found: { verdict: DayHour['verdict']; from: number; to: number }[] = [];
  for (const { minute, verdict } of hours) {
    const open = found.at(-1);
    if (open !== undefined && open.to === minute && open.verdict === verdict) open.to = minute + 60;
    else found.push({ verdict, from: minute, to: minute + 60 });
  }
  return found;
}
