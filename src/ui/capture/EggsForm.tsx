import type { ComponentProps } from 'preact';
import { useState } from 'preact/hooks';
import type { Draft } from '../../domain/events/event.ts';
import { MassPad, typedMass } from '../components/MassPad.tsx';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import { readMass } from '../mass-unit.ts';
import { CallVet } from '../screens/CallVet.tsx';
import type { FormProps } from './form-props.ts';
import { EggFathers } from './EggFathers.tsx';
import { lastLooks } from './last-looks.ts';
import { LastLookPicker } from './LastLookPicker.tsx';
import { Stepper, stepped } from './Stepper.tsx';
import { useFields, type Fields } from './use-fields.ts';

type Laid = Extract<Draft, { type: 'laid' }>;

const MOST = 20;
const kinds = [
  ['good', 'Good'],
  ['slugs', 'Slugs'],
  ['unsure', 'Unsure'],
] as const;
const masses = [
  ['clutchMassG', 'Clutch'],
  ['damMassG', 'Her, after'],
] as const;
const cares = [
  ['incubator', 'Incubator'],
  ['with her', 'With her'],
] as const;

const numberIn = (fields: Fields, name: string): number | undefined =>
  fields[name] === undefined ? undefined : Number(fields[name]);

/** Eggs found: what was counted and weighed, and since when they may have lain there. */
export function EggsForm({ view, occupant, night, put, onClose }: FormProps) {
  const { id: animal, name, season } = occupant;
  const [fields, change, forget] = useFields(`eggs.${animal}`);
  const [fathers, setFathers] = useState<ComponentProps<typeof EggFathers>['stated']>();
  const [weighing, setWeighing] = useState<(typeof masses)[number]>();
  const looks = lastLooks(season?.noEggs, view.night, night);
  const [since, setSince] = useState(() =>
    looks[0]?.at === season?.noEggs ? looks[0]?.at : undefined,
  );

  if (weighing) {
    const [mass, words] = weighing;
    return (
      <Sheet title={`${words}: mass`} onClose={() => setWeighing(undefined)}>
        <MassPad
          label="Mass"
          typed={fields[mass] ?? ''}
          onType={(typed) => change(mass, () => (typed === '' ? undefined : typed))}
          canBeDone
          doneLabel="Back to the eggs"
          onDone={() => setWeighing(undefined)}
        />
      </Sheet>
    );
  }

  const counted = Object.fromEntries(
    kinds.flatMap(([field]) => {
      const value = numberIn(fields, field);
      return value === undefined ? [] : [[field, value]];
    }),
  );
  const weighed = Object.fromEntries(
    masses.flatMap(([field]) => {
      const mass = readMass(fields[field] ?? '');
      return mass ? [[field, mass.massG]] : [];
    }),
  );
  const care = cares.find(([each]) => each === fields['care'])?.[0];
  const draft: Laid = {
    type: 'laid',
    animal,
    ...counted,
    ...weighed,
    ...(care === undefined ? {} : { care }),
    ...(since === undefined ? {} : { precision: 'between', notBefore: since }),
  };
  const words = kinds.flatMap(([kind, word]) =>
    fields[kind] === undefined ? [] : [`${fields[kind]} ${word.toLowerCase()}`],
  );
  const said = words.length > 0 ? words.join(', ') : 'not counted';

  return (
    <Sheet title={`Eggs of ${name}`} onClose={onClose}>
      {kinds.map(([kind, word]) => (
        <Stepper
          key={kind}
          label={word}
          count={numberIn(fields, kind)}
          most={MOST}
          onStep={(step) =>
            change(kind, (before) =>
              stepped(before === undefined ? undefined : Number(before), step, MOST)?.toString(),
            )
          }
        />
      ))}
      <div class="two">
        {masses.map((mass) => (
          <Slab
            key={mass[0]}
            icon="weigh"
            under={fields[mass[0]] === undefined ? 'not weighed' : typedMass(fields[mass[0]] ?? '')}
            onPress={() => setWeighing(mass)}
          >
            {mass[1]}
          </Slab>
        ))}
        {cares.map(([each, word]) => (
          <Slab
            key={each}
            pressed={care === each}
            onPress={() => change('care', (before) => (before === each ? undefined : each))}
          >
            {word}
          </Slab>
        ))}
      </div>
      <LastLookPicker
        label="Last look without eggs"
        looks={looks}
        chosen={since}
        onPick={setSince}
      />
      <EggFathers animal={animal} stated={fathers} onState={setFathers} />
      <Slab
        icon="eggs"
        kind="main"
        under={said}
        onPress={() =>
          put(draft, `laid: ${said}`, { after: forget, also: fathers ? [fathers] : [] })
        }
      >
        Write
      </Slab>
      <p class="note note-warn small">
        Do not turn the eggs. Straining, a prolapse, or eggs left inside: a reptile vet. <CallVet />
      </p>
    </Sheet>
  );
}
