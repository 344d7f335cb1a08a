import { LinkButton } from '#ui/shared/button.tsx';
import { PageFrame } from '#ui/shared/page-frame.tsx';
import { PageHeading } from '#ui/shared/page-heading.tsx';
import { brokenWords } from '#ui/words/broken.ts';

const NotFound = () => (
  <PageFrame audience="public">
    <div className="stack">
      <PageHeading>{brokenWords['lost.title']}</PageHeading>
      <p>{brokenWords['lost.text']}</p>
      <LinkButton href="/">{brokenWords['lost.home']}</LinkButton>
    </div>
  </PageFrame>
);

export default NotFound;
