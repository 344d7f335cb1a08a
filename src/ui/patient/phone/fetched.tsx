/** A part of a page that is fetched when it is shown. Where it cannot be had the page does without: nothing hangs on it. */
import { type ComponentType, lazy, Suspense } from 'react';

export const fetchedPart = <Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): ComponentType<Props> => {
  const Part = lazy(() =>
    load()
      .catch((): ComponentType<Props> => () => null)
      .then((part) => ({ default: part as ComponentType<object> })),
  );
  return (props) => (
    <Suspense fallback={null}>
      <Part {...props} />
    </Suspense>
  );
};
