const steps = [1, 1.5, 2, 3, 4];
const [least, most] = [1, 4];

const apart = (touches: TouchList): number => {
  const [a, b] = [touches[0], touches[1]];
  return a && b ? Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY) : 0;
};

/** How large a picture is shown, 1 being whole; by steps, or as two fingers say. */
export class Zoom {
  size = $state(1);
  #pinched: { apart: number; size: number } | null = null;

  get largest(): boolean {
    return this.size >= most;
  }

  get whole(): boolean {
    return this.size <= least;
  }

  larger = () => this.#set(steps.find((step) => step > this.size + 0.01) ?? most);
  smaller = () => this.#set([...steps].reverse().find((step) => step < this.size - 0.01) ?? least);
  reset = () => this.#set(least);

  /** Two fingers, or the wheel with the control key, as touch pads send it. */
  on(view: HTMLElement) {
    const start = (event: TouchEvent) => {
      this.#pinched = event.touches.length === 2 ? { apart: apart(event.touches), size: this.size } : null;
    };
    const move = (event: TouchEvent) => {
      if (!this.#pinched || event.touches.length !== 2 || this.#pinched.apart === 0) return;
      event.preventDefault();
      this.#set(this.#pinched.size * (apart(event.touches) / this.#pinched.apart));
    };
    const wheel = (event: WheelEvent) => {
      if (!event.ctrlKey) return;
      event.preventDefault();
      this.#set(this.size * Math.exp(-event.deltaY / 200));
    };
    view.addEventListener('touchstart', start);
    view.addEventListener('touchmove', move, { passive: false });
    view.addEventListener('touchend', start);
    view.addEventListener('wheel', wheel, { passive: false });
    return () => {
      view.removeEventListener('touchstart', start);
      view.removeEventListener('touchmove', move);
      view.removeEventListener('touchend', start);
      view.removeEventListener('wheel', wheel);
    };
  }

  #set(size: number) {
    this.size = Math.min(most, Math.max(least, size));
  }
}
