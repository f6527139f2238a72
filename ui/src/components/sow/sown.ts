import type { Act } from '../../backend/generated/types';

/** What was just put into compost: for its label, and for the same again. */
export interface Sown {
  name: string;
  code: string;
  tray: string | null;
  act: Extract<Act, { do: 'sow' | 'start_batch' }>;
}
