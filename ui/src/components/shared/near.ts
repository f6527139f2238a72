/** How far from what is seen something counts as near: a flick of a thumb. */
const margin = '1500px 0px';

/** Tells once that an element came near to what is seen of the page; gives what ends the watch. */
export function whenNear(element: HTMLElement, come: () => void): () => void {
  const observer = new IntersectionObserver(
    (seen) => {
      if (!seen.some((entry) => entry.isIntersecting)) return;
      observer.disconnect();
      come();
    },
    { root: element.closest('main'), rootMargin: margin },
  );
  observer.observe(element);
  return () => observer.disconnect();
}
