/** A work that figures come from, as the lists of the areas hold it. */
export interface Source {
  readonly authors: string;
  readonly year: number | null;
  readonly title: string;
  /** Journal, book, standard body. */
  readonly container?: string;
  /** DOI, registry number or address without a scheme. */
  readonly identifier?: string;
  readonly kind:
    | 'trial'
    | 'review'
    | 'guideline'
    | 'standard'
    | 'handbook'
    | 'study'
    | 'dataset'
    | 'practice';
}
