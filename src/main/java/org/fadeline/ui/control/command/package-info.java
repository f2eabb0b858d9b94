/** What can be done, with its keys: one command for menu, button and keyboard. */
@NullMarked
package org.fadeline.ui.control.command;

import org.jspecify.annotations.NullMarked;
