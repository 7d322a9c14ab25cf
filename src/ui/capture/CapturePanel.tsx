import { useEffect, useState } from 'preact/hooks';
import type { Day } from '../../domain/core/calendar.ts';
import type { CaptureView, Occupant } from '../../domain/views/capture-view.ts';
import { Notices } from '../screens/Notices.tsx';
import { CaptureActions } from './CaptureActions.tsx';
import { CaptureFacts } from './CaptureFacts.tsx';
import type { FormName } from './form-props.ts';
import { fetchFormsSoon, LazyForm } from './lazy-form.tsx';
import { EmptyTub } from './EmptyTub.tsx';
import { TubHead } from './TubHead.tsx';
import { WhenPicker } from './WhenPicker.tsx';
import './capture.css';

/**
 * Everything that can be written down at one tub, for whoever is in it now.
 *
 * Who and what is due stand above; what the thumb needs stands below.
 */
export function CapturePanel({ view }: { readonly view: CaptureView }) {
  const [chosen, setChosen] = useState<string>();
  const [form, setForm] = useState<FormName>();
  const [night, setNight] = useState<Day>();
  useEffect(fetchFormsSoon, []);
  const occupant: Occupant | undefined =
    view.occupants.find(({ id }) => id === chosen) ?? view.occupants[0];

  return (
    <div class="capture">
      <TubHead view={view} occupant={occupant} onChoose={setChosen} />
      {occupant ? (
        <>
          <CaptureFacts view={view} occupant={occupant}>
            <WhenPicker tonight={view.night} night={night} onPick={setNight} />
          </CaptureFacts>
          <div class="capture-hand">
            <Notices />
            <CaptureActions view={view} occupant={occupant} night={night} onForm={setForm} />
          </div>
          {form && (
            <LazyForm name={form} view={view} occupant={occupant} night={night} onForm={setForm} />
          )}
        </>
      ) : (
        <EmptyTub view={view} />
      )}
    </div>
  );
}
