/** Names the wake-up the page asks the platform for, and the one notification that may come of it. */
export const EVENING_TAG = 'evening';
