import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { LabelsScreenProps } from '../labels/LabelsScreen.tsx';
import { useModel, useView } from '../model.ts';
import { linkBase } from '../route.ts';
import { Page } from './Page.tsx';

/** Labels of this collection, handed to the printing screen, which is loaded when first needed. */
export function LabelsHost() {
  const { desk, failWith } = useModel();
  const view = useView('labels', null);
  const [Screen, setScreen] = useState<ComponentType<LabelsScreenProps>>();
  useEffect(() => {
    void import('../labels/LabelsScreen.tsx').then(
      ({ LabelsScreen }) => setScreen(() => LabelsScreen),
      failWith,
    );
  }, []);
  if (!view || !Screen) return <Page title="Labels" back />;
  return (
    <Screen
      subjects={view.labelled}
      linkBase={linkBase()}
      back="#/shelf"
      onPrinted={(codes, format) =>
        void desk
          .tell('record', { drafts: [{ type: 'label-printed', codes: [...codes], format }] })
          .catch(failWith)
      }
    />
  );
}
