import { createContext } from 'preact';

/** How it stands with reminders on this device, and where not, why. */
export type RemindersState =
  /** The browser has no way to wake a closed app. */
  | 'unable'
  /** The keeper once said no to notifications. */
  | 'blocked'
  /** It wakes installed apps only. */
  | 'not-installed'
  /** The app has not been put on the device yet: its first minute. */
  | 'not-ready'
  | 'off'
  | 'on';

/** What the platform can do while the app is closed. `src/app` provides it. */
export interface Reminders {
  readonly canNumberIcon: boolean;
  state(): Promise<RemindersState>;
  /** Asks for permission, so call it from a tap. */
  turnOn(): Promise<RemindersState>;
  turnOff(): Promise<RemindersState>;
}

/** Fetched when needed: most evenings nobody asks. */
export const RemindersContext = createContext<(() => Promise<Reminders>) | undefined>(undefined);
