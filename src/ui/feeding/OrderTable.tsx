import type { OrderLine } from '../../domain/prey/order.ts';
import { sizeName } from '../../domain/views/prey-words.ts';

/** What to order, size by size, with the numbers it comes from. */
export function OrderTable({
  order,
  weeks,
}: {
  readonly order: readonly OrderLine[];
  readonly weeks: number;
}) {
  if (order.length === 0) return <p class="quiet">Nobody takes thawed prey yet.</p>;
  return (
    <>
      <div class="order-scroll">
        <table class="numbers order">
          <caption class="small quiet">For {weeks} weeks from tonight</caption>
          <thead>
            <tr>
              <th scope="col">Size</th>
              <th scope="col">Eaten</th>
              <th scope="col">Enough</th>
              <th scope="col">There</th>
              <th scope="col">Order</th>
            </tr>
          </thead>
          <tbody>
            {order.map((line) => (
              <tr key={sizeName(line)}>
                <th scope="row">{sizeName(line)}</th>
                <td class="number">{line.expected.toFixed(0)}</td>
                <td class="number">{line.enough}</td>
                <td class="number">
                  {line.inStock}
                  {line.goesOff > 0 && ` (${line.goesOff} go off)`}
                </td>
                <td class="number">
                  <strong>{line.order}</strong>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="small quiet">
        Eaten: what is expected. Enough: with 9 chances in 10, each snake by its own appetite, where
        what one refuses goes to the next. Order: enough less what is there and keeps.
      </p>
    </>
  );
}
