import { renderToString } from 'preact-render-to-string';
import type { Desk, DeskStatus } from '../domain/desk.ts';
import type { TonightView } from '../domain/views/tonight-view.ts';
import { Frame } from './Frame.tsx';
import { createModel, ModelContext } from './model.ts';
import { TonightScreen } from './screens/TonightScreen.tsx';

/** One that has not said anything yet. */
const silentDesk: Desk = { watch: () => () => undefined, tell: () => new Promise(() => undefined) };

const noUpdates = { ready: { value: false }, apply: () => undefined };

/** The app as it draws a list that was last worked out, before the desk has spoken: text of HTML. */
export function firstSight(status: DeskStatus, tonight: TonightView): string {
  const lastSeen = { status, tonight, html: '' };
  const model = createModel(silentDesk, { collection: status.collection, lastSeen });
  return renderToString(
    <ModelContext.Provider value={model}>
      <Frame route={['tonight']} status={status} updates={noUpdates}>
        <TonightScreen />
      </Frame>
    </ModelContext.Provider>,
  );
}
