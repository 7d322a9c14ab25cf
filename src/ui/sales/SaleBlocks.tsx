import type { SaleBlock } from '../../domain/sale/against-sale.ts';
import { Because } from '../components/Because.tsx';
import { Icon } from '../components/Icon.tsx';
import { CallVet } from '../screens/CallVet.tsx';

/** What stands against selling it, each with its reason. */
export const SaleBlocks = ({ blocks }: { readonly blocks: readonly SaleBlock[] }) => (
  <>
    {blocks.map((block) => (
      <div key={block.rule} class="sale-block">
        <p>
          <Icon name="hold" /> {block.short}
        </p>
        <Because chore={block} />
        {block.vet && <CallVet />}
      </div>
    ))}
  </>
);
