import { h, hydrate } from 'preact';
import { MyBike } from './MyBike.tsx';

const form = document.querySelector('#my-bike');
if (form) hydrate(h(MyBike, {}), form);
