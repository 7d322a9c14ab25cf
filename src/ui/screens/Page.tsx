import type { ComponentChildren } from 'preact';
import { Icon } from '../components/Icon.tsx';
import { goBack } from '../route.ts';
import { Notices } from './Notices.tsx';

/** A screen with a heading, and what was just written at its foot. */
export const Page = ({
  title,
  beside,
  back = false,
  children,
}: {
  readonly title: string;
  readonly beside?: ComponentChildren;
  readonly back?: boolean;
  readonly children?: ComponentChildren;
}) => (
  <main class="page">
    <header class="page-head">
      {back && (
        <button type="button" class="pill" onClick={goBack} aria-label="Back">
          <Icon name="back" />
        </button>
      )}
      <h1>{title}</h1>
      {beside !== undefined && <p class="quiet">{beside}</p>}
    </header>
    {children}
    <div class="page-notices">
      <Notices />
    </div>
  </main>
);
