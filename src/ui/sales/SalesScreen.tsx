import type { SaleGroup, SaleLine } from '../../domain/views/sales-view.ts';
import { SexMark } from '../components/SexMark.tsx';
import { SlabLink } from '../components/Slab.tsx';
import { useView } from '../model.ts';
import { Page } from '../screens/Page.tsx';
import { SaleBlocks } from './SaleBlocks.tsx';
import './sales.css';

const titles: Readonly<Record<SaleGroup, string>> = {
  reserved: 'Reserved or sold, still here',
  'for sale': 'For sale',
  ready: 'Could go, not offered',
  'not yet': 'Not yet, because',
  'kept back': 'Kept back',
};

/** What is for sale, what is spoken for, and what is not to be sold yet, and why. */
export function SalesScreen() {
  const view = useView('sales', null);
  if (!view) return <Page title="Sales" back />;
  const groups = view.groups.filter(({ lines }) => lines.length > 0);
  return (
    <Page title="Sales" back>
      {!view.isWhole && <p class="quiet">Older records are still being read…</p>}
      {groups.length === 0 && (
        <p class="note">
          Nothing to sell. Young ones of your own stand here from hatching on; any other snake can
          be put up for sale on its page.
        </p>
      )}
      {groups.map(({ group, lines }) => (
        <section key={group} class="stack" aria-label={titles[group]}>
          <h2>
            {titles[group]} <span class="quiet number">{lines.length}</span>
          </h2>
          <ul class="sale-list">
            {lines.map((line) => (
              <li key={line.id}>
                <SaleEntry line={line} group={group} />
              </li>
            ))}
          </ul>
        </section>
      ))}
      <div class="two">
        <SlabLink icon="more" href="#/register" under="who was here when, as a file">
          Register
        </SlabLink>
        <SlabLink icon="safe" href="#/buyers" under="to look up, save or erase">
          Buyers
        </SlabLink>
      </div>
      <p class="small quiet">
        Before you sell: check local rules, licences and papers. Nothing here says that a sale is
        allowed.
      </p>
    </Page>
  );
}

const SaleEntry = ({ line, group }: { readonly line: SaleLine; readonly group: SaleGroup }) => (
  <>
    <a class="sale-entry" href={`#/papers/${line.id}`}>
      <span class="sale-name">
        <strong>{line.name}</strong> <SexMark sex={line.sex} />
        {line.position !== undefined && <span class="quiet number small">{line.position}</span>}
      </span>
      {line.traits !== undefined && <span class="small">{line.traits}</span>}
      {group !== 'ready' && group !== 'kept back' && line.says !== 'not offered' && (
        <span class="small quiet">{line.says}</span>
      )}
    </a>
    {group !== 'kept back' && <SaleBlocks blocks={line.blocks} />}
  </>
);
