import '@testing-library/jest-dom/vitest';
import { configure } from '@testing-library/svelte';

// A busy machine is not a fault.
configure({ asyncUtilTimeout: 10_000 });
