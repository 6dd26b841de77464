export { kinds, type Kind } from "../arguments/kinds";
