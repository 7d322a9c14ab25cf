import ICAL from 'ical.js';

// The other reader: ical.js, the calendar parser of Thunderbird's makers. It shares no code with us.

export interface ReadEvent {
  readonly uid: string;
  readonly summary: string;
  readonly description: string;
  readonly isDate: boolean;
  readonly start: string;
  readonly end: string;
  readonly sequence: number;
  readonly alarms: readonly string[];
  /** Whether any time in it names a zone or is UTC. */
  readonly zone: string;
  /** The local start of every time it happens. */
  readonly times: readonly string[];
}

export function readCalendar(text: string): readonly ReadEvent[] {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    const iterator = event.iterator();
    const times: string[] = [];
    for (let next = iterator.next(); next && times.length < 400; next = iterator.next()) {
      times.push(next.toString());
      if (!event.isRecurring()) break;
    }
    return {
      uid: event.uid,
      summary: event.summary,
      description: event.description,
      isDate: event.startDate.isDate,
      start: event.startDate.toString(),
      end: event.endDate.toString(),
      sequence: event.sequence,
      zone: event.startDate.zone.tzid,
      times,
      alarms: component.getAllSubcomponents('valarm').map((each) => {
        const trigger = each.getFirstPropertyValue('trigger') as ICAL.Duration;
        const at = event.startDate.clone();
        at.isDate = false;
        at.addDuration(trigger);
        return at.toString();
      }),
    };
  });
}
