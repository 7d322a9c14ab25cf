import { remembered } from './remember.ts';

let audio: AudioContext | undefined;

/** A short tone: two steps up for a record that is safe, one low for one that is not. */
function tone(frequenciesHz: readonly number[]): void {
  if (remembered('sound') === 'off' || typeof AudioContext === 'undefined') return;
  audio ??= new AudioContext();
  const start = audio.currentTime;
  for (const [i, frequencyHz] of frequenciesHz.entries()) {
    const oscillator = audio.createOscillator();
    const gain = audio.createGain();
    oscillator.frequency.value = frequencyHz;
    gain.gain.setValueAtTime(0.08, start + i * 0.07);
    gain.gain.exponentialRampToValueAtTime(0.0001, start + i * 0.07 + 0.09);
    oscillator.connect(gain).connect(audio.destination);
    oscillator.start(start + i * 0.07);
    oscillator.stop(start + i * 0.07 + 0.1);
  }
}

const vibrate = (patternMs: number[]): void => {
  // Absent on iPhones, whatever the types say.
  if (typeof navigator.vibrate === 'function') navigator.vibrate(patternMs);
};

/** Eyes are on the snake: the hand and the ear learn that it is written down. */
export function buzzDone(): void {
  vibrate([40]);
  tone([660, 880]);
}

export function buzzTrouble(): void {
  vibrate([90, 60, 90]);
  tone([180]);
}
