'use client';
/** Where on the patient's pages one is, kept in the browser's history so that Back goes one step back. */
import { useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react';

export interface Place {
  readonly screen: 'today' | 'session' | 'morning' | 'two-hours' | 'correct' | 'changed' | 'home-questions';
  readonly step: string;
}

export const home: Place = { screen: 'today', step: '' };

interface PlaceRef {
  readonly loadgatePlace?: Place;
}

const placeIn = (state: unknown): Place => (state as PlaceRef | null)?.loadgatePlace ?? home;

const screenKey = 'loadgate-screen';

const noteScreen = (screen: Place['screen']) => {
  try {
    window.sessionStorage.setItem(screenKey, screen);
  } catch {
    // Without it a reload comes back to today, with the way on standing there.
  }
};

/** The screen this tab showed before it was reloaded. */
export const screenBeforeReload = (): string | null => {
  try {
    return window.sessionStorage.getItem(screenKey);
  } catch {
    return null;
  }
};

const write = (place: Place) => window.history.pushState({ loadgatePlace: place } satisfies PlaceRef, '');

/** A place the browser's Back does not lead away from: it is written behind the one that was reached. */
export const stayAt = (place: Place): Place => {
  write(place);
  return place;
};

/** `onBack` hears of a place reached by the browser's own buttons and says where to be instead. */
export const usePlace = (onBack: (place: Place) => Place) => {
  const [place, setPlace] = useState<Place>(home);
  const listener = useRef(onBack);
  listener.current = onBack;
  useEffect(() => {
    const back = (event: PopStateEvent) => setPlace(listener.current(placeIn(event.state)));
    window.addEventListener('popstate', back);
    return () => window.removeEventListener('popstate', back);
  }, []);
  useEffect(() => noteScreen(place.screen), [place.screen]);
  const go = useCallback((next: Place) => {
    write(next);
    setPlace(next);
  }, []);
  return { place, go };
};

/** A thumb that presses twice would answer a page nobody has read: what points is not heard so long. */
const newForMs = 500;

/** Says of the page whether it is new; its style lets no pointer through while it is. Keys always are heard. */
export const useNewPage = (step: string) => {
  const first = useRef(true);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the step is what the effect answers to.
  useLayoutEffect(() => {
    const { dataset } = document.documentElement;
    if (first.current) {
      first.current = false;
      dataset.page = 'open';
      return;
    }
    dataset.page = 'new';
    const timer = setTimeout(() => {
      dataset.page = 'open';
    }, newForMs);
    return () => clearTimeout(timer);
  }, [step]);
};

/** After a step the heading of the new page has the focus and stands at the top. */
export const useHeadingFocus = (step: string) => {
  const first = useRef(true);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the step is what the effect answers to.
  useEffect(() => {
    if (first.current) {
      first.current = false;
      return;
    }
    window.scrollTo(0, 0);
    document.querySelector<HTMLElement>('main h1')?.focus({ preventScroll: true });
  }, [step]);
};
