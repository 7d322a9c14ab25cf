import { DAY_MS } from '../domain/core/calendar.ts';
import type { DeskStatus } from '../domain/desk.ts';
import type { DeviceNotes } from '../store/device-notes.ts';
import type { Collection, World } from './collection.ts';

/** How the collection stands, in numbers; told with every change. */
export function deskStatus(
  world: Pick<World, 'inMemoryOnly'>,
  { picture, count, unreadable }: Collection,
  name: DeskStatus['collection'],
  notes: DeviceNotes,
): DeskStatus {
  const { facts } = picture;
  const animals = picture.living().length;
  const sinceMs = notes.lastBackupMs ?? notes.begunMs ?? facts.nowMs;
  return {
    collection: name,
    records: count,
    animals,
    tubs: picture.walk().length,
    isWhole: picture.ledger.hasHistory,
    unreadable: unreadable.length,
    lastBackupMs: notes.lastBackupMs,
    backupDue:
      name === 'own' && animals > 0 && facts.nowMs - sinceMs > facts.protocol.backupDays * DAY_MS,
    inMemoryOnly: world.inMemoryOnly,
    initials: notes.initials,
    vet: picture.house()?.vet,
  };
}
