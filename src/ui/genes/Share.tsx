/** A share of one, as a bar; its number always stands beside it. */
export const Share = ({ share }: { readonly share: number }) => (
  <svg class="share" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
    <rect class="share-all" width="100" height="8" />
    <rect class="share-part" width={Math.max(share * 100, share > 0 ? 1 : 0)} height="8" />
  </svg>
);
