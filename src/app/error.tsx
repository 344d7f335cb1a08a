'use client';
import { Button } from '#ui/shared/button.tsx';
import { PageFrame } from '#ui/shared/page-frame.tsx';
import { PageHeading } from '#ui/shared/page-heading.tsx';
import { brokenWords } from '#ui/words/broken.ts';

/** Nothing of the fault itself is shown: it may hold what a person typed. */
const Broken = ({ reset }: { readonly error: Error; readonly reset: () => void }) => (
  <PageFrame audience="public">
    <div className="stack">
      <PageHeading>{brokenWords['broken.title']}</PageHeading>
      <p>{brokenWords['broken.text']}</p>
      <Button onClick={reset}>{brokenWords['broken.again']}</Button>
    </div>
  </PageFrame>
);

export default Broken;
