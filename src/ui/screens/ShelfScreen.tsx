import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { Icon } from '../components/Icon.tsx';
import { SlabLink } from '../components/Slab.tsx';
import { light, setLight } from '../light.ts';
import { lights } from '../lights.ts';
import { massUnit, setMassUnit } from '../mass-unit.ts';
import { useModel, useView } from '../model.ts';
import { remember, remembered } from '../remember.ts';
import { UnitSwitch } from '../room/UnitSwitch.tsx';
import { CallVet } from './CallVet.tsx';
import { Page } from './Page.tsx';

const lightWords = { dark: 'Dark', light: 'Light', red: 'Dim red' } as const;

/** What lies on the shelf: things one needs now and then, and how the app behaves. */
export function ShelfScreen() {
  const { desk, failWith } = useModel();
  const status = useView('status', null);
  const [sound, setSound] = useState(remembered('sound') !== 'off');
  return (
    <Page title="Shelf">
      <Group title="Tonight and the season">
        <SlabLink icon="feed" href="#/feeding" under="what to thaw tonight, and for whom">
          Feeding
        </SlabLink>
        <SlabLink icon="shelf" href="#/prey" under="the freezer, and what to order">
          Prey
        </SlabLink>
        <SlabLink icon="eggs" href="#/season" under="all females on one time axis, also on paper">
          The season
        </SlabLink>
        <SlabLink icon="pair" href="#/choose" under="which two come nearest to what you want">
          Choose pairs
        </SlabLink>
        <SlabLink icon="male" href="#/rotation" under="who visits whom in the next 14 nights">
          Share the males
        </SlabLink>
        <SlabLink icon="nest" href="#/hatchery" under="incubators, clutches and what comes out">
          Eggs
        </SlabLink>
        <SlabLink icon="out" href="#/sales" under="for sale, reserved, papers and the register">
          Sales
        </SlabLink>
        <SlabLink icon="find" href="#/review" under="what worked, with how sure that is">
          Season review
        </SlabLink>
      </Group>
      <Group title="Tubs and snakes">
        <SlabLink icon="print" href="#/labels">
          Print labels
        </SlabLink>
        <SlabLink icon="add" href="#/add">
          Add snakes
        </SlabLink>
        <SlabLink icon="add" href="#/spreadsheet" under="years of rows, as XLSX or CSV">
          Bring a spreadsheet
        </SlabLink>
        <SlabLink icon="racks" href="#/new-rack">
          New rack
        </SlabLink>
      </Group>
      <Group title="Safe and your way">
        <SlabLink
          icon="safe"
          href="#/safe"
          kind={status?.backupDue ? 'warn' : undefined}
          under={status?.backupDue ? 'No backup for a week' : undefined}
        >
          Backup and restore
        </SlabLink>
        <SlabLink icon="tonight" href="#/reminders" under="on this phone, or in your calendar">
          Reminders
        </SlabLink>
        <SlabLink icon="more" href="#/protocol" under="the numbers tonight is worked out with">
          Protocol
        </SlabLink>
      </Group>
      <section class="stack">
        <h2>Light</h2>
        <div class="chips" role="group" aria-label="Light">
          {lights.map((each) => (
            <button
              type="button"
              key={each}
              class="pill"
              aria-pressed={light.value === each}
              onClick={() => setLight(each)}
            >
              <Icon name="light" />
              {lightWords[each]}
            </button>
          ))}
        </div>
        <label class="tick">
          <input
            type="checkbox"
            checked={sound}
            onChange={({ currentTarget }) => {
              remember('sound', currentTarget.checked ? undefined : 'off');
              setSound(currentTarget.checked);
            }}
          />
          A short tone when something is written
        </label>
      </section>
      <section class="stack">
        <h2>Units</h2>
        <div class="chips">
          <button
            type="button"
            class="pill"
            onClick={() => void setMassUnit(massUnit() === 'g' ? 'oz' : 'g').catch(failWith)}
          >
            Use {massUnit() === 'g' ? 'lb and oz' : 'g'}
          </button>
          <UnitSwitch />
        </div>
        <p class="quiet small">
          What the screens show, on this device. Records stay in grams and °C. Ounces are rounded to
          a tenth, 3 g, and below 4 oz to a hundredth. Weights of prey and the protocol are typed in
          grams.
        </p>
      </section>
      <label>
        Your initials, put on each record
        <input
          maxLength={8}
          value={status?.initials ?? ''}
          autocomplete="off"
          onChange={({ currentTarget }) =>
            void desk.tell('setInitials', currentTarget.value).catch(failWith)
          }
        />
      </label>
      {status && (
        <p class="quiet small number">
          {status.records.toLocaleString('en')} records, {status.animals} snakes, {status.tubs}{' '}
          tubs.
        </p>
      )}
      <section class="stack small quiet">
        <h2>Cautions</h2>
        <p>
          Nightdrop prompts and explains; you decide. It is no vet: with breathing trouble, a
          prolapse, stalled laying or weight loss, call a reptile vet.
        </p>
        <CallVet />
        <p>
          Wash your hands after snakes, tubs and rodents: they can carry Salmonella. Check local
          rules before you breed, sell, send or feed live prey.
        </p>
      </section>
    </Page>
  );
}

const Group = ({
  title,
  children,
}: {
  readonly title: string;
  readonly children: ComponentChildren;
}) => (
  <section class="stack">
    <h2>{title}</h2>
    {children}
  </section>
);
