"""What a reading is worth: uncertainty, instruments, limits, and the verdict on a value."""
