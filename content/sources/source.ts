/** One entry of the bibliography. */
export interface Source {
  type: 'book' | 'paper' | 'report' | 'standard' | 'lecture' | 'data' | 'note' | 'practice' | 'own';
  title: string;
  authors?: string;
  year?: number;
  /** Publisher, journal with volume and pages, standard body, or where it is kept. */
  published?: string;
  /** Misprints found, editions that differ. */
  errata?: string;
}
