/** Once the next picture is shown; where none is drawn, a tenth of a second later. */
export const picture = () => new Promise<unknown>((go) => (requestAnimationFrame(() => setTimeout(go)), setTimeout(go, 100)));
