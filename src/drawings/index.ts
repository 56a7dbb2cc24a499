/** Views of a frame, drawn from its outline. Each is a `Drawing` to scale and can be saved at full size. */
export { Overlay } from './Overlay.tsx';
export { PlanView, type ViewProps } from './PlanView.tsx';
export { SideView } from './SideView.tsx';
