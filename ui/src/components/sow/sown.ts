import type { Act } from '../../backend/generated/types';
import type { Written } from '../../state/session.svelte';

/** What was just put into compost: for its label, and for the same again. */
export interface Sown {
  name: string;
  code: string;
  /** When it happened; none: now. */
  happened: string | null;
  act: Extract<Act, { do: 'sow' | 'start_batch' }>;
  written: Written;
}
