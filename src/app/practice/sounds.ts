/** Loudness of the hiss at full trigger, and of a tick. Quiet enough to talk over. */
const HISS = 0.12;
const TICK = 0.2;
/** The hiss follows the trigger without a click, s. */
const FOLLOW_S = 0.03;
const TICK_S = 0.03;
const TICK_HZ = 1400;
/** Middle of the hiss, Hz: a jet of air, not a whistle. */
const HISS_HZ = 4500;

/** The gun's hiss and the pace's tick. Silent until they are switched on, which needs a press on the page. */
export class Sounds {
  private context: AudioContext | null = null;
  private gain: GainNode | null = null;

  /** How far the trigger is pulled, 0 to 1. */
  hiss(trigger: number): void {
    const { context } = this;
    if (context === null || this.gain === null) return;
    // A page that no one has pressed yet is kept silent by the browser; the trigger is such a press.
    if (trigger > 0 && context.state === 'suspended') void context.resume();
    this.gain.gain.setTargetAtTime(HISS * Math.min(1, Math.max(0, trigger)), context.currentTime, FOLLOW_S);
  }

  tick(): void {
    const { context } = this;
    if (context === null) return;
    const tone = context.createOscillator();
    const fade = context.createGain();
    tone.frequency.value = TICK_HZ;
    fade.gain.setValueAtTime(TICK, context.currentTime);
    fade.gain.exponentialRampToValueAtTime(1e-4, context.currentTime + TICK_S);
    tone.connect(fade).connect(context.destination);
    tone.start();
    tone.stop(context.currentTime + TICK_S);
  }

  on(): void {
    if (this.context !== null) return;
    const context = new AudioContext();
    const noise = context.createBufferSource();
    noise.buffer = whiteNoise(context);
    noise.loop = true;
    const band = context.createBiquadFilter();
    band.type = 'bandpass';
    band.frequency.value = HISS_HZ;
    const gain = context.createGain();
    gain.gain.value = 0;
    noise.connect(band).connect(gain).connect(context.destination);
    noise.start();
    this.context = context;
    this.gain = gain;
  }

  off(): void {
    void this.context?.close();
    this.context = null;
    this.gain = null;
  }
}

/** One second of it: a loop that long is not heard to repeat. */
function whiteNoise(context: AudioContext): AudioBuffer {
  const buffer = context.createBuffer(1, context.sampleRate, context.sampleRate);
  const samples = buffer.getChannelData(0);
  for (let i = 0; i < samples.length; i++) samples[i] = 2 * Math.random() - 1;
  return buffer;
}
