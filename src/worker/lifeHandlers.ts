import { makeMomentField, momentFigures, startCoat, thicknessDomain, type CoatSetting, type CoatStrokes, type LaidCoat, type Recording } from '../../sim/index.ts';
import { filmBeneath } from './coatBeneath.ts';
import { gunScene } from './gunScene.ts';
import { ranCells } from './ranCells.ts';
import type { CoatRequest, MomentReply } from './protocol.ts';
import { Overtaken, type Handlers } from './serve.ts';
import { watchLife, type WatchedLife } from './watchedLife.ts';

type Domain = readonly [number, number];

/** What the life's messages need of the worker. */
export interface LifeSource {
  /** The coat as laid. */
  lay(request: CoatRequest): Promise<{ readonly setting: CoatSetting; readonly strokes: CoatStrokes; readonly laid: LaidCoat }>;
  /** Lets newer messages in, and throws `Overtaken` where one made this version old. */
  pause(version: number): Promise<void>;
  readonly recordings: ReadonlyMap<string, Recording>;
}

/** One coat's life under way. */
interface OpenLife {
  readonly version: number;
  readonly life: WatchedLife;
  readonly setting: CoatSetting;
  readonly strokes: CoatStrokes;
  /** Domains that hold the thickest film of the whole life, runs apart. */
  readonly held: Readonly<Record<'wet-now' | 'dry-now', Domain>>;
}

/**
 * The messages about a film in time. One coat's life is kept, that of the newest version. Requests
 * are worked off one after another, since they move the same film; a request for a time gives way to
 * a newer one between two pieces of work.
 */
export function makeLifeHandlers(source: LifeSource): Pick<Handlers, 'liveOpen' | 'liveAt' | 'liveClose'> {
  let open: OpenLife | null = null;
  let newestAt = 0;
  let newestVersion = 0;
  let closings = 0;
  let queue: Promise<unknown> = Promise.resolve();

  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const done = queue.then(work, work);
    queue = done.catch(() => undefined);
    return done;
  };

  const turnOf = (version: number, isOld: () => boolean): (() => Promise<void>) => {
    const opened = closings;
    newestVersion = Math.max(newestVersion, version);
    return async () => {
      await source.pause(version);
      if (opened !== closings || version < newestVersion || isOld()) throw new Overtaken();
    };
  };

  const lifeOf = async (request: CoatRequest, turn: () => Promise<void>): Promise<OpenLife> => {
    if (open?.version === request.version) return open;
    open = null;
    const { setting, strokes, laid } = await source.lay(request);
    const beneath = await filmBeneath(setting, source.recordings, turn);
    const coat = startCoat(setting, strokes, beneath);
    const { solids_m, fast_m, slow_m, beneathSolids_m, beneathFast_m, beneathSlow_m } = coat.film;
    const held = {
      'wet-now': thicknessDomain(sumOf([laid.film.wet_m, solids_m, fast_m, slow_m, beneathSolids_m, beneathFast_m, beneathSlow_m])),
      'dry-now': thicknessDomain(sumOf([laid.film.dry_m, solids_m, beneathSolids_m])),
    };
    open = { version: request.version, life: watchLife(coat), setting, strokes, held };
    return open;
  };

  return {
    liveOpen: (request) => {
      const turn = turnOf(request.version, () => false);
      return inTurn(async () => {
        const { life } = await lifeOf(request, turn);
        return { reply: { version: request.version, ...(await life.watch(turn)) } };
      });
    },
    liveAt: ({ time_s, field, ...request }) => {
      const mine = ++newestAt;
      const turn = turnOf(request.version, () => mine < newestAt);
      return inTurn(async () => {
        await turn();
        const { life, setting, strokes, held } = await lifeOf(request, turn);
        const moment = await life.momentAt(time_s, turn);
        const { dewPoint_K } = setting.air;
        const drawn = makeMomentField(field, moment, setting.target, dewPoint_K, field === 'wet-now' || field === 'dry-now' ? held[field] : undefined);
        const start_s = strokes.path.t_s[0] ?? 0;
        const reply: MomentReply = {
          version: request.version,
          time_s,
          field: drawn,
          wet_m: moment.wet_m.slice(),
          dry_m: moment.dry_m.slice(),
          figures: momentFigures(moment, dewPoint_K),
          ran: ranCells(moment),
          gun: time_s < lastTime(strokes) - start_s ? gunScene(strokes.path, setting.spray, start_s + time_s) : null,
        };
        return { reply, transfer: [reply.field.values, reply.wet_m, reply.dry_m, reply.ran].map(({ buffer }) => buffer) };
      });
    },
    liveClose: () => {
      closings++;
      open = null;
      return Promise.resolve({ reply: {} });
    },
  };
}

function lastTime({ path }: CoatStrokes): number {
  return path.t_s[path.count - 1] ?? 0;
}

function sumOf(parts: readonly ArrayLike<number>[]): Float32Array {
  const sum = new Float32Array(parts[0]?.length ?? 0);
  for (const part of parts) for (let cell = 0; cell < sum.length; cell++) sum[cell] = (sum[cell] as number) + (part[cell] as number);
  return sum;
}
