/** How many nights back something can be written down at the tub. */
export const NIGHTS_BACK = 14;
