import type { Configuration } from "webpack";

export function sharedConfiguration(name: string, mode: string): Configuration;
export function deskConfiguration(mode: string): Configuration;
export const TRIAL_ADDRESS: string;
export function addinAddress(given?: string): string;
export function addinConfiguration(mode: string, address?: string): Configuration;
