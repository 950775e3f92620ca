// Stands in for the thread that writes evidence: it begins and never comes to an end.
export default function work({ port }) {
  port.postMessage('begun')
  for (;;);
}
