/** Small drawn shapes that carry a status without colour. Never alone: a word stands beside each. */
export const shapes = {
  /** Goes on: a step up. */
  forward: 'M3 17h6v-5h6V7h6',
  /** Stays: two level lines. */
  level: 'M4 9h16M4 15h16',
  /** Less: a step down. */
  back: 'M3 7h6v5h6v5h6',
  /** Stop: a closed octagon. */
  stop: 'M8 3h8l5 5v8l-5 5H8l-5-5V8zM8 12h8',
  /** Look here: a triangle. */
  care: 'M12 3.5 22 20.5H2zM12 10v5M12 17.4v.6',
  /** Done. */
  done: 'M4 12.5l5.5 5.5L20 6.5',
  /** Waits: an open circle with a hand. */
  waiting: 'M12 3a9 9 0 1 1 0 18 9 9 0 0 1 0-18zM12 7.5V12l3.5 2',
  /** To sign: a pen on a line. */
  pen: 'M3 21h18M6 17l1-4.5L16 3.5l3.5 3.5-9 9z',
  /** Told: a plain dot. */
  note: 'M12 8.5a3.5 3.5 0 1 1 0 7 3.5 3.5 0 0 1 0-7z',
  /** Not known or not given: a broken line. */
  unknown: 'M3 12h4M10 12h4M17 12h4',
  /** Closed. */
  closed: 'M5 5l14 14M19 5 5 19',
} as const;
export type Shape = keyof typeof shapes;

/** Its strokes are those of the style sheet. */
export const Mark = ({ shape }: { readonly shape: Shape }) => (
  <svg className="mark" viewBox="0 0 24 24" aria-hidden="true">
    <path d={shapes[shape]} />
  </svg>
);
