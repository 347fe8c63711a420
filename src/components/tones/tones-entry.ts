import { h, hydrate } from 'preact';
import { ToneList } from './ToneList.tsx';

const place = document.querySelector<HTMLElement>('#tones');
if (place) hydrate(h(ToneList, { folder: place.dataset['folder'] ?? '' }), place);
